import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";

interface LazyProps {
  load(): Promise<ComponentType>;
}

/** A view that few devices show: its code comes when it is wanted, so that a phone's first load has no more than it needs. */
export function Lazy({ load }: LazyProps) {
  const [View, setView] = useState<ComponentType | null>(null);
  useEffect(() => void load().then((loaded) => setView(() => loaded)), []);
  return View && <View />;
}
