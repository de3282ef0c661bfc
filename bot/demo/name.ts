/** What the invented class is called in the store, in whatever language it is read. */
export const DEMO_NAME = "Harbour workshop, evening class (invented demo)";
