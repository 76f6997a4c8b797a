// Package shape finds the shape of a list: blocks, headings, what each column means.
package shape
