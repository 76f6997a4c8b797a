// Package where finds the line on which each key and table of a TOML text stands, for
// messages: the TOML reader gives values without their place.
//
// Its words:
//
//   - path: where a value belongs, ".branch[2].layer[0].of", lists counted from 0.
//   - too deep: brackets in brackets that would exhaust the TOML reader.
//
// It reads no values and refuses nothing.
package where
