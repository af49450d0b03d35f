#pragma once

#include "app/pages/page.h"

namespace rig {

// A page that is none of the five moments: a line below the top bar or the file's menu leads to it, and Esc
// back to where one was.
class AsidePage : public Page
{
    Q_OBJECT

public:
    explicit AsidePage(QWidget* parent = nullptr) : Page{parent}
    {
        setFocusPolicy(Qt::ClickFocus); // hands it on: by Tab that would pass over what stands before
    }

signals:
    void leaveAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace rig
