// Package cover says whether a heat-shrink sleeve goes on, ends up tight, and
// what it then measures; and it ranks the sizes that could be taken.
//
// Words. A sleeve is supplied with one bore and would shrink in free air to
// another, the recovered bore, with the recovered wall. Over is the diameter
// over the high spots of what it covers (what callipers read), tape the
// circumference of its convex hull ÷ π (what a pi tape reads). Slide is the
// supplied bore less the largest thing the sleeve passes on its way; grip is
// tape ÷ recovered bore; stretch is over ÷ supplied bore.
//
// Two things stop a sleeve: it does not pass, or it ends up loose. They are
// judged at the extremes of the wire's tolerance. Everything else is advice,
// three pieces of it, judged at nominal diameters and published bores: kept, nearly
// kept or missed, so that no verdict goes from easy to refused on a hundredth of a
// millimetre. A sleeve with less than half the room it wants sticks: nobody slides
// it on, and it is a warning.
//
// The same tests hold for each end of a moulded boot, which has bores but no
// published wall: leave WallMM at zero, and only Wraps is false.
//
// What it does not do: it knows no catalogue, no temperature and no fluid, does
// not find out what must be passed, and writes no sentences.
package cover
