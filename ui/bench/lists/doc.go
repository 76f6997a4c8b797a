// Package lists is the screen on which a wire list is taken in.
package lists
