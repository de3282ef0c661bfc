/* placeholder while the store is being laid */
export interface Stores {
  readonly placeholder?: never;
}
