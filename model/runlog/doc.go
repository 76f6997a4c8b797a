// Package runlog is the log of a bench run: what was ticked, measured, tested and signed since the
// file was saved, one line each, so that several benches build from one file and none of them loses
// what another did.
//
// Words. A line is one thing that a build had, and what it has instead: nothing and a tick, a tick
// and nothing, a step that is begun and the same step with a piece more. Between makes the lines of
// a change, Fold puts lines into builds. The order of the log decides: a step that two have ticked
// counts once, with the name of the first; a piece that two have done counts once. What each read,
// tested and wrote down is kept from both.
//
// A log is text in UTF-8. Its first line says what it is and names it; every other line is one JSON
// object. A build in a line has the keys of [[build]] in the file of a harness, and is read by the
// same rules.
//
// It does no file work: see contralay/model/file.
package runlog
