// Text that a locale has made. A plain string is none, so no English can slip past the locale.

declare const said: unique symbol

/** Made by `say`, `show` or `own` of a locale, and by nothing else. */
export type Text = string & { readonly [said]: true }

/** One text of several; what is absent is left out. Only signs and spaces may stand between. */
export const joined = (texts: readonly (Text | undefined)[], between: ' ' | ', ' | '; ' | '\n' | ' · ' = ' '): Text =>
  texts.filter(text => text !== undefined && text !== '').join(between) as Text
