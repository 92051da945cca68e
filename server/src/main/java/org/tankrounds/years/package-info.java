/** One season beside the other, also those from before the chapter used this service. */
package org.tankrounds.years;
