// Text for a terminal: names come from other people's files, and a terminal obeys control characters.

/** The text with every control character but tab and line feed, and every mark that turns the writing round, as �. */
export function printable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  return text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '\uFFFD');
}
