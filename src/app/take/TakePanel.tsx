// What can be taken along: the year as numbers, the design, the pictures. Folded at the end of the sheet; its code is
// fetched when it is first opened.

import { useState } from 'preact/hooks';
import { Late } from '../parts/Late.tsx';

const loadList = () => import('./TakeList.tsx').then(({ TakeList }) => TakeList);

export function TakePanel() {
  const [opened, setOpened] = useState(false);
  return (
    <details
      class="take-panel"
      onToggle={(event) => {
        if (event.currentTarget.open) setOpened(true);
      }}
    >
      <summary>
        <h2>Take it with you: data and pictures</h2>
      </summary>
      {opened && <Late load={loadList} wait="Fetching the list…" />}
    </details>
  );
}
