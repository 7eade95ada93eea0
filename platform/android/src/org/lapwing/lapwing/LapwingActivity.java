// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

package org.lapwing.lapwing;

import android.content.Intent;
import android.content.res.Configuration;
import android.os.Bundle;

import org.qtproject.qt.android.bindings.QtActivity;

/** Qt's activity, which also takes in files and answers that the system brings. */
public class LapwingActivity extends QtActivity {
    @Override
    public void onCreate(Bundle saved) {
        super.onCreate(saved);
        // After the system ended the app in the background, the intent is an old one.
        if (saved == null) Documents.receive(this, getIntent());
    }

    @Override
    public void onNewIntent(Intent intent) {
        super.onNewIntent(intent);
        Documents.receive(this, intent);
    }

    @Override
    protected void onActivityResult(int request, int result, Intent data) {
        if (!Documents.answered(this, request, result, data)) super.onActivityResult(request, result, data);
    }

    @Override
    public void onConfigurationChanged(Configuration configuration) {
        super.onConfigurationChanged(configuration);
        Phone.lookChanged();
    }
}
