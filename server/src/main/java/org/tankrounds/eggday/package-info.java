/** Egg day: eggs are fetched and driven to schools; what each class receives begins its count. */
package org.tankrounds.eggday;
