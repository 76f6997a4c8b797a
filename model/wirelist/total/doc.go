// Package total holds the line that sums a list up against the rows of the list.
package total
