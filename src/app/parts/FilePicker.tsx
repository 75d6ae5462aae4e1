// The browser's own choice of files behind a button that the page draws. The files chosen are handed on once, and the same
// file may be chosen again.

import type { RefObject } from 'preact';

export interface FilePickerProps {
  /** a click on it opens the choice */
  readonly input: RefObject<HTMLInputElement | null>;
  readonly label: string;
  /** endings, with their dots, between commas */
  readonly accept: string;
  readonly multiple?: boolean;
  readonly onFiles: (files: File[]) => void;
}

export function FilePicker({ input, label, accept, multiple = false, onFiles }: FilePickerProps) {
  return (
    <input
      ref={input}
      class="visually-hidden"
      type="file"
      multiple={multiple}
      tabIndex={-1}
      aria-label={label}
      accept={accept}
      onChange={(event) => {
        const files = [...(event.currentTarget.files ?? [])];
        event.currentTarget.value = '';
        if (files.length > 0) onFiles(files);
      }}
    />
  );
}
