#pragma once

#include "app/theme/theme.h"
#include "core/lesson/sign_off_standing.h"

#include <QWidget>

#include <optional>

class QLabel;

namespace rig {

class MarkWidget;

// How a chosen person stands on this airframe, beside their name: grey, with a shape of its own. It takes no
// room where there is nothing to tell.
class PersonNote : public QWidget
{
    Q_OBJECT

public:
    explicit PersonNote(const char* objectName, QWidget* parent = nullptr);

    // Without a name: it stands right beside it.
    void show(const std::optional<SignOffStanding>& standing, const QString& name = {});
    void setLook(const Look& look);

private:
    MarkWidget* m_mark = nullptr;
    QLabel* m_words = nullptr;
};

} // namespace rig
