// Package runon adds to the row of a cavity the rows below it that only go on with its texts, as a table drawn in narrow columns
// has them.
//
// It reads no value: package row does, of the rows that are left.
package runon
