import type { Mark } from "../../commands/batch/marks.ts";

/** Five litres of stock at 150 ml a roll: what is left decides. */
export class DeveloperOracle {
  ml = 0;
  private readonly said = new Set<Mark>();

  use(ml: number): Mark[] {
    this.ml += ml;
    const left = Math.floor((5000 - this.ml) / 150);
    const marks: Mark[] = [];
    if (this.ml >= 3750) marks.push("tired");
    if (left <= 2) marks.push("last-films");
    if (left <= 0) marks.push("exhausted");
    const furthest = marks.at(-1);
    const news = furthest && !this.said.has(furthest) ? [furthest] : [];
    for (const mark of marks) this.said.add(mark);
    return news;
  }
}

/*
 * What a fixer of 20 rolls must come to, worked out apart from the program, roll by roll, with pencil and paper's means:
 * a straight line for the clearing time, a count of rolls (a tabular-grain one counts two), a set of what was said.
 */

const CAPACITY = 20;
const FRESH = 45;

export class FixerOracle {
  /** Rolls as they passed. */
  passed = 0;
  /** In plain rolls, as the bath carries them now. */
  load = 0;
  topUps = 0;
  tests = 1;
  private anchor = { load: 0, seconds: FRESH, perRoll: FRESH / CAPACITY };
  private testedLoad = 0;
  private readonly said = new Set<string>();

  get seconds(): number {
    return this.anchor.seconds + this.anchor.perRoll * (this.load - this.anchor.load);
  }

  get isExhausted(): boolean {
    return CAPACITY - this.load < 1 || this.seconds >= 2 * FRESH;
  }

  use(rolls: number, isTabular: boolean): Mark[] {
    this.passed += rolls;
    this.load += isTabular ? 2 * rolls : rolls;
    return this.news();
  }

  test(seconds: number): Mark[] {
    const perRoll = Math.max(FRESH / CAPACITY, this.load > 0 ? (seconds - FRESH) / this.load : 0);
    this.anchor = { load: this.load, seconds, perRoll };
    this.testedLoad = this.load;
    this.tests += 1;
    return this.news();
  }

  /** Half the bath changed for fresh. */
  topUpHalf(): Mark[] {
    const seconds = FRESH + (this.seconds - FRESH) / 2;
    this.load /= 2;
    this.anchor = { ...this.anchor, load: this.load, seconds };
    this.topUps += 1;
    return this.news();
  }

  private news(): Mark[] {
    const left = Math.floor(CAPACITY - this.load + 1e-9);
    const use: Mark[] = [];
    if (this.load >= 0.75 * CAPACITY || this.seconds >= 1.5 * FRESH) use.push("tired");
    if (left <= 2) use.push("last-films");
    if (this.isExhausted) use.push("exhausted");
    const news: Mark[] = [];
    const furthest = use.at(-1);
    if (furthest && !this.said.has(`${furthest}.${this.topUps}`)) news.push(furthest);
    for (const mark of use) this.said.add(`${mark}.${this.topUps}`);
    const isOverdue = this.load - this.testedLoad >= CAPACITY / 4 && !this.isExhausted;
    if (isOverdue && !this.said.has(`test.${this.tests}`)) {
      this.said.add(`test.${this.tests}`);
      news.push("test-overdue");
    }
    return news;
  }
}
