// A picture on the page: the same shapes that go into a file.

import { h, type JSX } from 'preact';
import { type Picture, type Shape, TYPEFACE } from './picture.ts';

export function PictureView({ picture }: { picture: Picture }): JSX.Element {
  const { id, width, height, words, shapes } = picture;
  return (
    <svg
      class="picture"
      data-picture={id}
      viewBox={`0 0 ${width} ${height}`}
      font-family={TYPEFACE}
      role="img"
      aria-label={words}
    >
      {shapes.map(shapeElement)}
    </svg>
  );
}

function shapeElement({ tag, attributes, inside }: Shape): JSX.Element {
  return h(tag, attributes, typeof inside === 'string' ? inside : inside?.map(shapeElement)) as JSX.Element;
}
