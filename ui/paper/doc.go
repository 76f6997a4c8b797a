// Package paper is every output that is read away from the bench: figures as
// JSON, snags and plans as plain text. Everything here is a pure function of the
// sheet; nothing carries an escape code.
package paper
