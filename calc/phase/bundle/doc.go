// Package bundle is the phase in which each branch is laid: layers, order, bend.
package bundle
