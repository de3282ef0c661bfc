import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { PageRoom } from "./room.ts";
import { usePart, type State } from "./state.ts";

export const RoomContext = createContext<PageRoom | null>(null);

export function useRoom(): PageRoom {
  const room = useContext(RoomContext);
  if (!room) throw new Error("drawn outside the room");
  return room;
}

export function useRoomPart<T>(pick: (state: State) => T): T {
  return usePart(useRoom().store, pick);
}
