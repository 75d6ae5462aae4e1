// A text without the mark that some programs write before its first letter.

/** @returns the text, its byte-order mark taken off where it has one */
export function withoutByteOrderMark(text: string): string {
  return text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
}
