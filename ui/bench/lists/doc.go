// Package lists is the screens on which a wire list is taken in: what it makes, and one table of it a page, where a person puts right
// what was read wrong.
package lists
