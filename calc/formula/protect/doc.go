// Package protect says what a fuse or an electronic limit does for a wire: what it
// carries for ever, how fast it opens, how much a short lets through before it does,
// and what a conductor bears in that time.
//
// Words. A device has a rating (the limit an electronic one is set to) and opens at a
// current within some time, stated by its maker as a least and a most. The let-through
// of a short is the current squared times that time, in A²s. What a conductor bears is
// the same quantity, of all its heat staying in the copper (adiabatic), which is good
// to five seconds.
//
// What it does not do. It knows no ambient of the device, no ageing, no tolerance of
// an electronic limit beyond what is given, no arc. The times of blade fuses are from
// makers' sheets as others quote them, not read in the standard: they stand as memory.
package protect
