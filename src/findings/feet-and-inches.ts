// A length as a builder reads it off a tape: "8 ft 4 in". SI in, words out. 1 in is 0.0254 m exactly (NIST SP 811, appendix B).

const METRES_PER_INCH = 0.0254;
const QUARTERS = ['', '¼', '½', '¾'] as const;

/**
 * Feet and inches, to the inch or to a quarter of one.
 *
 * @param metres below zero too
 * @param space between a number and its unit, and between feet and inches
 */
export function feetAndInches(metres: number, finest: 'inch' | 'quarter' = 'inch', space = ' '): string {
  const perInch = finest === 'inch' ? 1 : 4;
  const parts = Math.round((Math.abs(metres) / METRES_PER_INCH) * perInch);
  const [feet, left] = [Math.floor(parts / (12 * perInch)), parts % (12 * perInch)];
  const [inches, quarters] = [Math.floor(left / perInch), perInch === 1 ? 0 : left % 4];
  const told = [
    ...(feet > 0 || left === 0 ? [String(feet).replace(/\B(?=(\d{3})+$)/g, ','), 'ft'] : []),
    ...(left > 0 ? [`${inches === 0 && quarters > 0 ? '' : inches}${QUARTERS[quarters]}`, 'in'] : []),
  ];
  return (metres < 0 && parts > 0 ? '−' : '') + told.join(space);
}
