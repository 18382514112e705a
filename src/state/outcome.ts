/** Outcome of an action that a page tells about in words. */
export interface ToldOutcome {
  readonly ok: boolean;
  readonly sentence: string;
  /** The file was changed after it was saved; nothing was taken before a person says so. */
  readonly askAboutChanged?: boolean;
  /** A page that has more to say. */
  readonly more?: { readonly href: string; readonly word: string };
}
