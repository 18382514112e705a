/** What the pages of session plans ask of the app. */
export interface TeachServices {
  /** Offers a coach's copy as a file. */
  readonly saveSessionPlan: (name: string, text: string) => void;
  readonly print: () => void;
}
