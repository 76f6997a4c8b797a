// Package others says what other benches did to the record of what is built, and settles what two
// have done together.
package others
