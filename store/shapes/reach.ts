/** Whom something that is said reaches. */
export interface Reach {
  readonly classId: number;
  /** 1 or 0: the person is of this class; a device of theirs is to be called while its page is closed. */
  readonly isMember: number;
  readonly hasPhone: number;
}
