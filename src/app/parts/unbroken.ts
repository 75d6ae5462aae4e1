// A sentence for the screen: a number and its unit stay on one line. In: a sentence of the findings or of an answer.
// Out: the same with the space between them made unbreakable; nothing else is touched.

const UNITS =
  '%|°C|°F|K|m²K/W|m²|m³|m|cm|ft²|ft³|ft|in|kg|lb|tonnes|litres|gal|kWh/m²|kWh|kW|W|Bq/m³|pCi/L|ppm|hours|hour';
const NUMBER_AND_UNIT = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\p{L}\\d]))`, 'gu');

/** The sentence with every number held to its unit. */
export function unbroken(sentence: string): string {
  return sentence.replace(NUMBER_AND_UNIT, '$1\u00a0');
}
