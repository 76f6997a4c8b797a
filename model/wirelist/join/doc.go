// Package join makes the harness of what the rows said: nets, units, drains, the tree.
package join
