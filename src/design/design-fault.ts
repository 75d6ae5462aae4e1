// What is wrong with a design: where, the value found and what is allowed.

export interface DesignFault {
  /** dotted path, '' for the whole */
  readonly path: string;
  /** the value as printed, shortened */
  readonly value: string;
  readonly allowed: string;
}
