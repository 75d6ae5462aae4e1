// A picture as dots, for programs that read no SVG: drawn by the browser on a canvas, three dots to a point.

import type { Picture } from '../pictures/picture.ts';
import { pictureText } from '../pictures/picture-text.ts';

const DOTS = 3;

/** The PNG; rejects with a sentence when the browser cannot make it. */
export async function pngOf(picture: Picture): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(pictureText(picture))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = picture.width * DOTS;
  canvas.height = picture.height * DOTS;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((settle, fail) => {
    canvas.toBlob((blob) =>
      blob ? settle(blob) : fail(new Error('This browser could not make the picture; take the SVG.')),
    );
  });
}
