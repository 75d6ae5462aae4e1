// A view whose code is fetched when it is first wanted, so that the first picture does not wait for it.

import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export interface LateProps {
  /** always the same function for the same view */
  readonly load: () => Promise<ComponentType>;
  readonly wait: string;
}

export function Late({ load, wait }: LateProps) {
  const [found, setFound] = useState<{ readonly view: ComponentType } | null>(null);
  const [fault, setFault] = useState(false);
  useEffect(() => {
    let current = true;
    load().then(
      (view) => current && setFound({ view }),
      () => current && setFault(true),
    );
    return () => {
      current = false;
    };
  }, [load]);
  if (found) return <found.view />;
  return (
    <p class="late" role="status">
      {fault ? 'This part of the page could not be fetched. Reload the page and try again.' : wait}
    </p>
  );
}
