// Package signoff tells rows that stand among those of a list and are none: who drew it, which page it is, what was changed in
// which revision, and what is not to be built any more.
package signoff
