export const en = {
  noted: (print: string) => `Noted on ${print}. It can be found by these words now.`,
  rated: (print: string, rating: number) => `${print} is rated ${rating} of 5.`,
};
export type NoteWords = typeof en;
