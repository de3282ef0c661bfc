/* Which page is open: the room's own, or the board on the wall. */

export const isOnWall = (): boolean => location.pathname === "/board";
