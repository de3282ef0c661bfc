/** One tone of the page, `at` and `seconds` by the context's own clock. */
export function playNote(context: AudioContext, hertz: number, at: number, seconds: number): void {
  const oscillator = context.createOscillator();
  const gain = context.createGain();
  oscillator.type = "triangle";
  oscillator.frequency.value = hertz;
  // Eased in and out, since a hard edge clicks.
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(0.6, at + 0.015);
  gain.gain.setValueAtTime(0.6, at + seconds - 0.03);
  gain.gain.linearRampToValueAtTime(0, at + seconds);
  oscillator.connect(gain).connect(context.destination);
  oscillator.start(at);
  oscillator.stop(at + seconds + 0.02);
}
