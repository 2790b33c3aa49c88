// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

import java.sql.Connection;

record OpensADatabase(Connection connection) {}
