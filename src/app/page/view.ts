// Which view stands on the page: the sheet, or one that takes its place for a while. The address says it, so that the
// browser's own "back" leads to the sheet again. Where the sheet was scrolled to is kept.

import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Views whose address is their name. */
const NAMED = ['own', 'report', 'build', 'trust', 'found', 'protocol'] as const;

/** The second press of a double click is not meant for the view that the first has brought [ms]. */
const SECOND_PRESS_MS = 300;

export type View = 'sheet' | 'client' | (typeof NAMED)[number];

/** The view an address asks for. */
function viewOf(hash: string): View {
  const view = hash.slice(1);
  // A client's link, before and after it is read.
  if (view.split('=')[0] === 'client') return 'client';
  return NAMED.find((name) => name === view) ?? 'sheet';
}

/** The view now, followed as the address changes. */
export function useView(): View {
  const [view, setView] = useState<View>(() => viewOf(location.hash));
  const scrolled = useRef(0);
  const shown = useRef(view);
  useLayoutEffect(() => {
    const follow = () => {
      if (shown.current === 'sheet') scrolled.current = lastScroll;
      setView(viewOf(location.hash));
    };
    // The browser may scroll before it tells that the address has changed.
    let lastScroll = window.scrollY;
    const note = () => {
      if (viewOf(location.hash) === 'sheet' && shown.current === 'sheet') lastScroll = window.scrollY;
    };
    window.addEventListener('hashchange', follow);
    window.addEventListener('scroll', note, { passive: true });
    return () => {
      window.removeEventListener('hashchange', follow);
      window.removeEventListener('scroll', note);
    };
  }, []);
  useLayoutEffect(() => {
    if (shown.current === view) return;
    shown.current = view;
    window.scrollTo({ top: view === 'sheet' ? scrolled.current : 0, behavior: 'instant' });
    const { classList } = document.documentElement;
    classList.add('is-just-shown');
    const timer = setTimeout(() => classList.remove('is-just-shown'), SECOND_PRESS_MS);
    return () => {
      clearTimeout(timer);
      classList.remove('is-just-shown');
    };
  }, [view]);
  return view;
}
