// Package report holds what is said of a list and of which place in it.
package report
