// Package report holds what an import says: the facts of what was made, and the findings
// with the place of each in the lists.
//
// Its words:
//
//   - finding: one thing to say about a place: its level, its rule, what stands there and
//     what was done about it.
//   - rule: the kind of a finding, "no colour". The short report gathers findings by it.
//   - level: stop, warn or note.
//
// It prints lines of text; how they look on a screen or on paper is not its work.
package report
