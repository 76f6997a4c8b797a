// Package comment reads the comments of a program as the text that they are: a list often stands in them, with a sign before each
// of its lines.
//
// It knows the signs of many languages and no language. What it does not do: it looks at no value, and keeps no program.
package comment
