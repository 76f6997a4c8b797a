// Package splicecells takes the splice that a row names in a column of its own for the end that the row leaves empty.
//
//	Connector | Pin | Signal | Splice | Destination
//	HELM      | 1   | feed   | SP1    |
//	HELM      | 3   | data H |        | SONAR-3
//	PANEL     | 22  | feed   | SP1    |
//
// A splice beside an end that is filled says nothing that is sure: it stays where it stands.
package splicecells
