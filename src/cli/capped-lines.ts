// Lines of a stream, none longer than a cap: what is past it is read and thrown away, so that one endless line can
// neither fill the memory nor end a batch. In: chunks of bytes or text. Out: lines without their endings.

/** Longest line handed on [characters]; a design has about 3000, and whoever reads the line refuses this much. */
export const MOST_LINE_CHARACTERS = 1_000_000;

/**
 * Split a stream into lines at LF or CRLF.
 *
 * @param chunks bytes of UTF-8 or text, cut anywhere
 * @param most characters kept of a line; a longer line comes out cut to one more than this, so that it can be told
 */
export async function* cappedLines(
  chunks: AsyncIterable<Uint8Array | string>,
  most: number = MOST_LINE_CHARACTERS,
): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let line = '';
  const ended = () => {
    const whole = line.endsWith('\r') ? line.slice(0, -1) : line;
    line = '';
    return whole;
  };
  for await (const chunk of chunks) {
    const text = typeof chunk === 'string' ? chunk : decoder.decode(chunk, { stream: true });
    let from = 0;
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      if (line.length <= most) line += text.slice(from, Math.min(end, from + most + 1 - line.length));
      yield ended();
      from = end + 1;
    }
    if (line.length <= most) line += text.slice(from, from + most + 1 - line.length);
  }
  line += decoder.decode();
  if (line !== '') yield ended();
}
