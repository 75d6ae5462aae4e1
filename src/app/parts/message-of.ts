// What went wrong, in the words of whatever was thrown.

export function messageOf(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}
