// Package why answers how each figure of a finished sheet was made.
package why
