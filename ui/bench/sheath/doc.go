// Package sheath is the screens of what goes over a branch.
package sheath
