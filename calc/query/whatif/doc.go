// Package whatif answers how a branch could be otherwise: its centre, its spares, its hand, its sizes,
// its specification, its kind of sheath. Kinds says what there is to ask, Changed is the harness in one
// of those ways, FiguresOf what a person compares them by.
//
// A change keeps whatever it does not name: a lay-up that still closes within the limits stays, locked layers and
// pinned pieces always do. Where another lay-up is needed it is the one that the branch would be proposed as
// (planning.Best). The sheath follows: one that is the first of its kind now is the first of its kind then; another
// stays as long as it goes on and grips.
//
// Nothing here is kept between calls, and a sheet is only read, so that many ways can be worked out side by side.
package whatif
