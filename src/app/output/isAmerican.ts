/** Where the American sizes of paper are the ones at hand: common practice. */
const american = /-(US|CA|MX|PH|CL|CO|VE)\b/i;

/** Whether the reader's language is of such a country. */
export function isAmerican(): boolean {
  return american.test(navigator.language);
}
