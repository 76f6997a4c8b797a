// Package draft is the harness as far as it is read: what the rows add to and the joins finish.
package draft
