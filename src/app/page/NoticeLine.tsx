// What the person should know now: a climate that could not be loaded, a run that failed, news of files and versions. Read aloud as it comes.

import { useSession } from '../state/session-context.ts';

export function NoticeLine() {
  const { workspace, notices, dismiss } = useSession();
  const climate = workspace.climate.value;
  const standing = [
    ...(workspace.runFault.value === null
      ? []
      : [`This year could not be computed: ${workspace.runFault.value}`]),
  ];
  return (
    <div class="notices" role="status">
      {climate.state === 'failed' && (
        <p class="is-trouble">
          {climate.message}
          <button
            type="button"
            class="notice-action"
            onClick={() => void workspace.climateReady(climate.key)}
          >
            Try again
          </button>
        </p>
      )}
      {standing.map((text) => (
        <p key={text} class="is-trouble">
          {text}
        </p>
      ))}
      {workspace.carried.value.map((text) => (
        <p key={text} class="is-news">
          {text}
        </p>
      ))}
      {notices.value.map((notice) => (
        <p key={notice.id} class={`is-${notice.kind}`}>
          {notice.text}
          {notice.action && (
            <button type="button" class="notice-action" onClick={notice.action.run}>
              {notice.action.label}
            </button>
          )}
          <button type="button" aria-label="Close this message" onClick={() => dismiss(notice.id)}>
            ×
          </button>
        </p>
      ))}
    </div>
  );
}
