// Who moves an opening or draws a cover: an opener or motor, people by their habits, or nobody.

export type OpeningControl = 'automatic' | 'attentive' | 'away' | 'forgetful' | 'never';
