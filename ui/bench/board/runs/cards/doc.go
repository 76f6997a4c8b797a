// Package cards makes the card of each step of a run, from what is in hand.
package cards
