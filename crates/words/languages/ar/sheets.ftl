sheets-foot = التأرجح الجيد ليس إذنًا بالإطلاق. القرار للقواعد المحلية ولشخص بالغ.
sheets-page = الصفحة { $page } من { $of }
sheets-caution = انتبه
