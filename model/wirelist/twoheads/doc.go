// Package twoheads joins headings that stand in two rows: a part of the wire above, what is said of it below.
//
//	Nr | ECU | Sensor      |     | Ader           Nr | ECU Pin | Sensor Bezeichnung | Sensor Pin | Ader Farbe
//	   | Pin | Bezeichnung | Pin | Farbe    ->    1  | A14     | Knock              | 1          | ws
//	1  | A14 | Knock       | 1   | ws
//
// Two rows of which the first says from and to, or names both ends, stay as they are: package sidehead reads them.
package twoheads
