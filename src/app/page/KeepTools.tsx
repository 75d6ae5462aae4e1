// Save, open, link, report: what takes the design out of the browser and back in.

import { useRef } from 'preact/hooks';
import { copyLink, putInAddress } from '../keeping/link-in-address.ts';
import { saveFile } from '../keeping/save-file.ts';
import { FilePicker } from '../parts/FilePicker.tsx';
import { useSession } from '../state/session-context.ts';

export function KeepTools() {
  const session = useSession();
  const input = useRef<HTMLInputElement>(null);
  const design = session.workspace.design;

  // One after the other: a file may ask something.
  const openAll = async (files: readonly File[]) => {
    for (const file of files) await session.openFile(file);
  };
  const save = () => {
    const { name, text } = session.fileOf(design.value);
    saveFile(name, new Blob([text], { type: 'application/json' }));
  };
  const share = async () => {
    const address = await session.linkOf(design.value);
    putInAddress(address, design);
    const copied = await copyLink(address);
    session.tell(
      'news',
      copied
        ? 'The link is copied; it holds the whole design.'
        : 'The link is in the address bar; it holds the whole design.',
    );
  };

  const shareWithClient = async () => {
    const address = await session.clientLink();
    if (address === null)
      return session.tell(
        'trouble',
        'So many versions make too long a link. Send the files, or remove some.',
      );
    const copied = await copyLink(address);
    if (!copied) putInAddress(address, design);
    session.tell(
      'news',
      `The link for a client is ${copied ? 'copied' : 'in the address bar'}; it holds the design and every version.`,
    );
  };

  return (
    <div class="keep-tools">
      <button type="button" class="is-quiet" onClick={save}>
        Save file
      </button>
      <button type="button" class="is-quiet" onClick={() => input.current?.click()}>
        Open file
      </button>
      <FilePicker
        input={input}
        label="Open a design or a weather file"
        accept=".json,.csv,.tm2,.tmy,.txt,.gz"
        multiple
        onFiles={(files) => void openAll(files)}
      />
      <button type="button" onClick={() => void share()}>
        Copy link
      </button>
      <button type="button" class="is-quiet" data-keep="client" onClick={() => void shareWithClient()}>
        Link for a client
      </button>
      <a class="button is-main" href="#report">
        Report
      </a>
    </div>
  );
}
