// A page that is one file on disk needs no copy of itself.

export function keepOfflineCopy(_lists: readonly string[], _onNewer: (change: () => void) => void): void {}
