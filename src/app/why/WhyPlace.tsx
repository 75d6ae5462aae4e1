// The place above a picture where the reasons of a figure appear once the figure is clicked; the picture is what to look
// at next. The code behind it is fetched then.

import { Late } from '../parts/Late.tsx';
import type { Explanation } from '../state/session.ts';
import { useSession } from '../state/session-context.ts';

const loadNote = () => import('./WhyNote.tsx').then(({ WhyNote }) => WhyNote);

export function WhyPlace({ picture }: { picture: Explanation }) {
  const { asked } = useSession();
  if (asked.value?.picture !== picture) return null;
  return <Late load={loadNote} wait="Fetching the reasons…" />;
}
