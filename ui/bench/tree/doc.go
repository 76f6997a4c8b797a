// Package tree is the screens of the map of the harness: branches, terminations, lists.
package tree
