// Package lettered reads lines below the name of a thing that begin with the letter or the short word of one of its terminals each.
package lettered
