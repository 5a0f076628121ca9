/** A cell that can be spoken of: by scenario and column. */
export interface NamedCell {
  readonly scenarioId: string;
  readonly columnId: string;
}
