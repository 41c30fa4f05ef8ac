/** What is asked: offers for one knife. */
import type { Offer } from '../../model/index.ts';

/** An offer with what it takes of the user. */
export interface OfferAsked {
  of: 'refinish' | 'regrind' | 'steel';
  offer: Offer;
  /** Of another steel. */
  designation?: string;
  minutes?: number;
  price?: number;
}

export interface CostAsked {
  knife: string;
  against: string;
  edgeLengthMm: number;
  /** Steel the user takes off, mm³ a minute. */
  rate?: number;
  offers: readonly OfferAsked[];
}
