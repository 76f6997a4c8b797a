// Package which says in words which connector takes what must go in: as text for the command, as JSON,
// and sentence by sentence for the bench.
package which
