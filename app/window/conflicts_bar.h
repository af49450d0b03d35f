#pragma once

#include "app/theme/theme.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace rig {

class MarkWidget;

// The line beside the one of open questions, for as long as nobody has decided what two laptops say
// differently.
class ConflictsBar : public QFrame
{
    Q_OBJECT

public:
    explicit ConflictsBar(QWidget* parent = nullptr);

    void display(int open);
    void setLook(const Look& look);
    // On the page itself the button leads back.
    void setOnPage(bool onPage);

signals:
    void showAsked();
    void leaveAsked();

private:
    bool m_onPage = false;
    MarkWidget* m_mark = nullptr;
    QLabel* m_text = nullptr;
    QPushButton* m_show = nullptr;
};

} // namespace rig
