// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

package org.lapwing.lapwing;

import android.app.Activity;
import android.content.ActivityNotFoundException;
import android.content.ClipData;
import android.content.Context;
import android.content.Intent;
import android.net.Uri;
import android.os.Environment;
import android.os.Vibrator;
import android.provider.Settings;
import android.view.HapticFeedbackConstants;
import android.view.WindowManager;

import androidx.core.content.FileProvider;

import java.io.File;

/** What the app asks of the phone; called from C++ (platform/android/android_devices.cpp), on any thread. */
final class Phone {
    private static final String AUTHORITY = "org.lapwing.lapwing.files";

    private Phone() {}

    /** C++ listens, once it does. */
    private static volatile boolean listening = false;

    private static native void changed();

    static void listen() {
        listening = true;
    }

    static void lookChanged() {
        if (listening) changed();
    }

    /** Where files go that a person can find without the app; res/xml/handed_over.xml names the same folders. */
    static String documents(Activity activity) {
        File shared = activity.getExternalFilesDir(Environment.DIRECTORY_DOCUMENTS);
        if (shared == null) shared = new File(activity.getFilesDir(), Environment.DIRECTORY_DOCUMENTS);
        return new File(shared, "Lapwing").getPath();
    }

    /** Opens the share sheet. False when no program can take the file. */
    static boolean share(Activity activity, String path, String type) {
        try {
            Uri uri = FileProvider.getUriForFile(activity, AUTHORITY, new File(path));
            Intent send = new Intent(Intent.ACTION_SEND);
            send.setType(type);
            send.putExtra(Intent.EXTRA_STREAM, uri);
            // The chooser shows the file's name, and only the chosen program may read it.
            send.setClipData(ClipData.newRawUri("", uri));
            send.addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION);
            activity.startActivity(Intent.createChooser(send, null));
            return true;
        } catch (ActivityNotFoundException | IllegalArgumentException refused) {
            return false;
        }
    }

    static boolean canTick(Activity activity) {
        Vibrator motor = (Vibrator) activity.getSystemService(Context.VIBRATOR_SERVICE);
        return motor != null && motor.hasVibrator();
    }

    /** The tick of a key: by the view it needs no permission and follows the system's setting. */
    static void tick(Activity activity) {
        activity.runOnUiThread(() -> activity.getWindow().getDecorView()
                .performHapticFeedback(HapticFeedbackConstants.KEYBOARD_TAP));
    }

    static void keepAwake(Activity activity, boolean on) {
        activity.runOnUiThread(() -> {
            if (on) activity.getWindow().addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
            else activity.getWindow().clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
        });
    }

    static float textScale(Activity activity) {
        return activity.getResources().getConfiguration().fontScale;
    }

    static boolean reducedMotion(Activity activity) {
        return Settings.Global.getFloat(activity.getContentResolver(),
                Settings.Global.ANIMATOR_DURATION_SCALE, 1f) == 0f;
    }

    static boolean openSettings(Activity activity) {
        try {
            activity.startActivity(new Intent(Settings.ACTION_APPLICATION_DETAILS_SETTINGS,
                    Uri.fromParts("package", activity.getPackageName(), null)));
            return true;
        } catch (ActivityNotFoundException none) {
            return false;
        }
    }
}
