// Package learn is how a shop learns from what it measured: it sets the predicted against
// the measured, and says by how much the predictions of a kind are off, how sure that is,
// and which readings do not belong.
//
// Words. A reading is one size predicted and the same size measured. Its ratio is
// measured ÷ predicted, a pure number, so it is the same in mm and in inch. A group is
// what is judged together, such as all layers three deep. Bias is the mean ratio less 1:
// 0.02 says that things come out 2 % larger than predicted. Spread is the sample standard
// deviation of the ratio, of one reading and not of the mean; what the calliper and the
// hand add is in it. An outlier is a reading so far from the others of its group that
// chance seldom puts one there.
//
// What the figures rest on, and do not test:
//
//   - The ratios of a group scatter about one mean, near enough by the normal law.
//   - Each reading tells something of its own. Ten readings along one branch, or ten
//     branches of wire from one spool, share what is odd about it, and the interval then
//     comes out narrower than it should.
//   - Each group stands by itself. Of twenty groups without any bias one is expected to
//     look as though it had one, at a confidence of 95 %; and whoever looks again after
//     every reading, until it matters, is wrong more often than 5 %.
//   - What was left out as an outlier no longer widens the interval.
//
// What it does not do: it reads no files, chooses no groups, drops no reading unless told
// its name, changes no prediction by itself, and writes no sentences.
package learn
