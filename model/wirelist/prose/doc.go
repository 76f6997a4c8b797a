// Package prose looks at the lines of text above a table: which go on with a sentence, and which name a connector at their head.
package prose
