// A picture as the text of an SVG file that stands alone: size, title for a reader who cannot see it, white ground.

import { SHEET } from '../parts/palette.ts';
import { type Picture, type Shape, TYPEFACE } from './picture.ts';

/** The file. */
export function pictureText({ width, height, words, shapes }: Picture): string {
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${escaped(TYPEFACE)}" role="img">`,
    `<title>${escaped(words)}</title>`,
    `<rect width="${width}" height="${height}" fill="${SHEET.ground}"/>`,
    ...shapes.map(shapeText),
    '</svg>',
    '',
  ].join('\n');
}

function shapeText({ tag, attributes, inside }: Shape): string {
  const written = Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
  if (inside === undefined) return `<${tag}${written}/>`;
  const content = typeof inside === 'string' ? escaped(inside) : inside.map(shapeText).join('');
  return `<${tag}${written}>${content}</${tag}>`;
}

/** Characters that XML reserves, and those it forbids, kept out of text and attributes. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
